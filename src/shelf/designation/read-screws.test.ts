import { describe, expect, test } from 'vitest';
import { readDesignation } from './read-designation.ts';
import { designationValues } from './reading.ts';
import { writtenForms } from './written-forms.ts';

// All rows: common practice, no source, but for the diameters of numbers (ASME B18.6.4, 0.060 + 0.013 n).
const families: Readonly<Record<string, string>> = {
  'number, threads and length': `
    10-13 x 1 | screw | #10; 13tpi; 1in
    10-13x1 | screw | #10; 13tpi; 1in
    10-13 X 1 | screw | #10; 13tpi; 1in
    10-13 × 1 | screw | #10; 13tpi; 1in
    10-13 * 1 | screw | #10; 13tpi; 1in
    10-13 by 1 | screw | #10; 13tpi; 1in
    10-13 por 1 | screw | #10; 13tpi; 1in
    10–13 x 1 | screw | #10; 13tpi; 1in
    10 - 13 x 1 | screw | #10; 13tpi; 1in
    #10-13 x 1 | screw | #10; 13tpi; 1in
    # 10-13 x 1 | screw | #10; 13tpi; 1in
    No. 10-13 x 1 | screw | #10; 13tpi; 1in
    no 10-13 x 1 | screw | #10; 13tpi; 1in
    № 10-13 x 1 | screw | #10; 13tpi; 1in
    Nº 10-13 x 1 | screw | #10; 13tpi; 1in
    number 10-13 x 1 | screw | #10; 13tpi; 1in
    10-13 x 1" | screw | #10; 13tpi; 1in
    10-13 x 1” | screw | #10; 13tpi; 1in
    10-13 x 1″ | screw | #10; 13tpi; 1in
    10-13 x 1'' | screw | #10; 13tpi; 1in
    10-13 x 1 in | screw | #10; 13tpi; 1in
    10-13 x 1in. | screw | #10; 13tpi; 1in
    10-13 x 1 inch | screw | #10; 13tpi; 1in
    10-13 x 1 pulgada | screw | #10; 13tpi; 1in
    10-13 x 1 1/2 | screw | #10; 13tpi; 1.5in
    10-13 x 1-1/2 | screw | #10; 13tpi; 1.5in
    10-13 x 1-1/2" | screw | #10; 13tpi; 1.5in
    10-13 x 1½ | screw | #10; 13tpi; 1.5in
    10-13 x 1 ½ in | screw | #10; 13tpi; 1.5in
    10-13 x 1½" | screw | #10; 13tpi; 1.5in
    10-13 x 1.5 | screw | #10; 13tpi; 1.5in
    10-13 x 1.50" | screw | #10; 13tpi; 1.5in
    10-13 x 1,5 | screw | #10; 13tpi; 1.5in
    10-13 1-1/2 | screw | #10; 13tpi; 1.5in
    10-13 1 1/2" | screw | #10; 13tpi; 1.5in
    10-13 - 1-1/2 | screw | #10; 13tpi; 1.5in
    10-13-1-1/2 | screw | #10; 13tpi; 1.5in
    12-14-1 1/2 | screw | #12; 14tpi; 1.5in
    10-16-3/4 | screw | #10; 16tpi; .75in
    10-16 x 3/4 | screw | #10; 16tpi; .75in
    10-16 x ¾ | screw | #10; 16tpi; .75in
    10-16 x .75 | screw | #10; 16tpi; .75in
    10-16 x 0.75 in | screw | #10; 16tpi; .75in
    10-16 x 3 / 4 | screw | #10; 16tpi; .75in
    8-18 x 1/2 | screw | #8; 18tpi; .5in
    6-20 x 3/8 | screw | #6; 20tpi; .375in
    9-15 x 1 | screw | #9; 15tpi; 1in
    10-12 x 1 | screw | #10; 12tpi; 1in
    10-14 x 2 1/2 | screw | #10; 14tpi; 2.5in
    10-24 x 1 1/4 | screw | #10; 24tpi; 1.25in
    12-11 x 2 | screw | #12; 11tpi; 2in
    12-14 x 3/4 | screw | #12; 14tpi; .75in
    12-24 x 1-1/4 | screw | #12; 24tpi; 1.25in
    14-10 x 3 | screw | #14; 10tpi; 3in
    14-13 x 6 | screw | #14; 13tpi; 6in
    14-14 x 1-3/4 | screw | #14; 14tpi; 1.75in
    10-16 x 25mm | screw | #10; 16tpi; 25mm
    12-14 x 38 mm | screw | #12; 14tpi; 38mm
    10-16 x 2.5 cm | screw | #10; 16tpi; 25mm
    14g-10 x 50mm | screw | #14; 10tpi; 50mm
    #10 x 1 in, 16 tpi | screw | #10; 16tpi; 1in`,
  'fraction, threads and length': `
    1/4-14 x 7/8 | screw | 1/4; 14tpi; .875in
    1/4-14x7/8 | screw | 1/4; 14tpi; .875in
    ¼-14 × ⅞ | screw | 1/4; 14tpi; .875in
    1/4"-14 x 7/8" | screw | 1/4; 14tpi; .875in
    1/4 - 14 x 1 1/4 | screw | 1/4; 14tpi; 1.25in
    1/4-20 x 2 | screw | 1/4; 20tpi; 2in
    1/4-28 x 1-1/8 | screw | 1/4; 28tpi; 1.125in
    5/16-18 x 1 1/2 | screw | 5/16; 18tpi; 1.5in
    3/8-16 x 4 in | screw | 3/8; 16tpi; 4in
    1/4-14 7/8 | screw | 1/4; 14tpi; .875in
    1/4-14 1 1/4 | screw | 1/4; 14tpi; 1.25in
    1/4-14 x 1-5/16" | screw | 1/4; 14tpi; 1.3125in`,
  'number and length without threads': `
    #10 x 1 | screw | #10; 1in
    #10 x 1 1/2 | screw | #10; 1.5in
    #10x1-1/2 | screw | #10; 1.5in
    #10 1 1/2 | screw | #10; 1.5in
    #10-1 1/2 | screw | #10; 1.5in
    10 x 1 1/2 | screw | #10; 1.5in
    10 x 1" | screw | #10; 1in
    8 x 1/2 | screw | #8; .5in
    10g x 25mm | screw | #10; 25mm
    14 x 1 1/2 | screw | #14; 1.5in
    No. 12 x 2 | screw | #12; 2in
    num. 12 x 2 | screw | #12; 2in
    1" #10-16 | screw | #10; 16tpi; 1in
    1 1/2" x #10 | screw | #10; 1.5in
    1/4 x 3 | screw | 1/4; 3in
    .25 x 3 | screw | d .25; 3in
    0.19 in x 1.5 in | screw | d .19; 1.5in
    dia 0.19 in x 1.5 in, 16 tpi | screw | d .19; 16tpi; 1.5in
    #10 x 1 1/2 long | screw | #10; 1.5in`,
  'metric sizes': `
    M5.5x25 | screw | d 5.5mm; 25mm
    M5.5 x 25 mm | screw | d 5.5mm; 25mm
    m5,5 x 25 | screw | d 5.5mm; 25mm
    5.5 x 25 mm | screw | d 5.5mm; 25mm
    5.5mm x 25mm | screw | d 5.5mm; 25mm
    5,5x25mm | screw | d 5.5mm; 25mm
    6.3 x 100 mm | screw | d 6.3mm; 100mm
    ST5.5 x 38 | screw | d 5.5mm; 38mm; pitch=1.8
    ST4.8x19 | screw | d 4.8mm; 19mm; pitch=1.6
    ST 6.3 x 25 mm | screw | d 6.3mm; 25mm; pitch=1.8
    M6 x 20 | screw | d 6mm; 20mm
    M6-1.0 x 20 | screw | d 6mm; 20mm; pitch=1
    M8x1.25x40 | screw | d 8mm; 40mm; pitch=1.25
    M8 x 40 bolt | bolt | d 8mm; 40mm`,
  heads: `
    #10-16 x 1 1/2 pancake | screw | #10; 16tpi; 1.5in; head=pancake
    10-16 x 1 Pancake Head | screw | #10; 16tpi; 1in; head=pancake
    pancake head 10-16 x 1 | screw | #10; 16tpi; 1in; head=pancake
    10-16 x 1 wafer head | screw | #10; 16tpi; 1in; head=wafer
    10-16 x 1 HWH | screw | #10; 16tpi; 1in; head=hex washer
    10-16 x 1HWH | screw | #10; 16tpi; 1in; head=hex washer
    10-16x3/4hwh | screw | #10; 16tpi; .75in; head=hex washer
    10-16 x 1 H.W.H. | screw | #10; 16tpi; 1in; head=hex washer
    10-16 x 1 hex washer head | screw | #10; 16tpi; 1in; head=hex washer
    10-16 x 1 hex-washer-head | screw | #10; 16tpi; 1in; head=hex washer
    10-16 x 1 HW | screw | #10; 16tpi; 1in; head=hex washer
    10-16 x 1 hex hd | screw | #10; 16tpi; 1in; head=hex
    10-16 x 1 HH | screw | #10; 16tpi; 1in; head=hex
    10-16 x 1 FH | screw | #10; 16tpi; 1in; head=flat
    10-16 x 1 flat head | screw | #10; 16tpi; 1in; head=flat
    8 x 1 1/4 csk | screw | #8; 1.25in; head=flat
    8 x 3/4 pan head | screw | #8; .75in; head=pan
    8 x 3/4 PH | screw | #8; .75in; head=pan; ?pan head, pancake head
    8-18 x 1/2 truss head | screw | #8; 18tpi; .5in; head=truss
    8-18 x 1/2 modified truss | screw | #8; 18tpi; .5in; head=truss
    12-14 x 2 low profile | screw | #12; 14tpi; 2in; head=low profile
    12-11 x 2 round washer head | screw | #12; 11tpi; 2in; head=round washer
    12-11 x 2 washer head | screw | #12; 11tpi; 2in; head=round washer; ?whether it is hex or round
    8 x 1 oval head | screw | #8; 1in; head=oval
    8 x 1 1/4 bugle head | screw | #8; 1.25in; head=bugle`,
  points: `
    12-14 X 1.5" SDS #3 | screw | #12; 14tpi; 1.5in; point=drill; no=3
    12-14 x 1 1/2 #3 SDS | screw | #12; 14tpi; 1.5in; point=drill; no=3
    12-14 x 1 1/2 SDS | screw | #12; 14tpi; 1.5in; point=drill
    12-14 x 1 1/2 SD | screw | #12; 14tpi; 1.5in; point=drill
    12-14 x 1 1/2 self-drilling | screw | #12; 14tpi; 1.5in; point=drill
    12-14 x 1 1/2 self drilling screw | screw | #12; 14tpi; 1.5in; point=drill
    12-14 x 1 1/2 drill point 2 | screw | #12; 14tpi; 1.5in; point=drill; no=2
    12-14 x 1 1/2 drill point no. 2 | screw | #12; 14tpi; 1.5in; point=drill; no=2
    12-14 x 1 1/2 #2 drill point | screw | #12; 14tpi; 1.5in; point=drill; no=2
    12-14 x 1 1/2 #2 pt | screw | #12; 14tpi; 1.5in; point=drill; no=2
    12-14 x 1 1/2 pt. 3 | screw | #12; 14tpi; 1.5in; point=drill; no=3
    12-14 x 1 1/2 #3 DP | screw | #12; 14tpi; 1.5in; point=drill; no=3
    12-24 x 1 1/4 #5 point | screw | #12; 24tpi; 1.25in; point=drill; no=5
    12-24 x 1 1/4 SDS #7 | screw | #12; 24tpi; 1.25in; ?numbered 1 to 5
    12-14 x 1 1/2 HWH #3 | screw | #12; 14tpi; 1.5in; head=hex washer; point=drill; no=3; ?or of the bit
    10-14 x 1 T17 | screw | #10; 14tpi; 1in; point=type 17
    10-14 x 1 T-17 | screw | #10; 14tpi; 1in; point=type 17
    10-14 x 1 type 17 | screw | #10; 14tpi; 1in; point=type 17
    10-14 x 1 Type-17 point | screw | #10; 14tpi; 1in; point=type 17
    10-13 x 1 sharp point | screw | #10; 13tpi; 1in; point=sharp
    10-13 x 1 sharp | screw | #10; 13tpi; 1in; point=sharp
    10-13 x 1 needle point | screw | #10; 13tpi; 1in; point=sharp
    10-12 x 1 type AB | screw | #10; 12tpi; 1in; point=gimlet
    10-12 x 1 AB | screw | #10; 12tpi; 1in; point=gimlet
    10-12 x 1 type A | screw | #10; 12tpi; 1in; point=gimlet
    10-12 x 1 type B | screw | #10; 12tpi; 1in; ~B
    10-12 x 1 gimlet point | screw | #10; 12tpi; 1in; point=gimlet
    10-16 x 1 BSD | screw | #10; 16tpi; 1in; thread=spaced
    12-24 x 1 CSD | screw | #12; 24tpi; 1in; thread=machine
    10-16 x 1 chip free point | screw | #10; 16tpi; 1in; point=chip-free
    10-16 x 1 self-tapping | screw | #10; 16tpi; 1in; ?drills its own hole is not said`,
  drives: `
    10-13 x 1 #2 square | screw | #10; 13tpi; 1in; drive=No. 2 square bit
    10-13 x 1 #2 square drive | screw | #10; 13tpi; 1in; drive=No. 2 square bit
    10-13 x 1 No. 2 square bit | screw | #10; 13tpi; 1in; drive=No. 2 square bit
    10-13 x 1 SQ2 | screw | #10; 13tpi; 1in; drive=No. 2 square bit
    10-13 x 1 sq #2 | screw | #10; 13tpi; 1in; drive=No. 2 square bit
    10-13 x 1 #3 sq | screw | #10; 13tpi; 1in; drive=No. 3 square bit
    10-13 x 1 square drive | screw | #10; 13tpi; 1in; drive=square bit
    10-13 x 1 T25 | screw | #10; 13tpi; 1in; drive=six-lobe 25 bit
    10-13 x 1 T25 six-lobe | screw | #10; 13tpi; 1in; drive=six-lobe 25 bit
    10-13 x 1 T-25 star drive | screw | #10; 13tpi; 1in; drive=six-lobe 25 bit
    10-13 x 1 six lobe 25 | screw | #10; 13tpi; 1in; drive=six-lobe 25 bit
    10-13 x 1 star | screw | #10; 13tpi; 1in; drive=six-lobe bit
    10-13 x 1 PH2 | screw | #10; 13tpi; 1in; drive=No. 2 cross recess bit
    10-13 x 1 PH2 cross recess | screw | #10; 13tpi; 1in; drive=No. 2 cross recess bit
    10-13 x 1 #2 cross recess | screw | #10; 13tpi; 1in; drive=No. 2 cross recess bit
    10-13 x 1 PZ2 | screw | #10; 13tpi; 1in; drive=No. 2 cross recess Z bit
    10-13 x 1 pancake #2 sq. dr. | screw | #10; 13tpi; 1in; head=pancake; drive=No. 2 square bit
    10-13 x 1 slotted | screw | #10; 13tpi; 1in; drive=slotted
    12-14 x 1 3/8 hex | screw | #12; 14tpi; 1.375in; head=hex
    12-14 x 1", 3/8 hex | screw | #12; 14tpi; 1in; drive=3/8 in hex socket
    12-14 x 1" 5/16 HWH | screw | #12; 14tpi; 1in; drive=5/16 in hex socket; head=hex washer
    12-14 x 1" HWH 5/16 hex drive | screw | #12; 14tpi; 1in; head=hex washer; drive=5/16 in hex socket
    12-14 x 1" 8 mm hex | screw | #12; 14tpi; 1in; drive=8 mm hex socket
    12-14 x 1/2 hex washer | screw | #12; 14tpi; .5in; head=hex washer`,
  washers: `
    1/4-14x7/8 HWH w/ washer | screw | 1/4; 14tpi; .875in; head=hex washer; washer=washer
    1/4-14 x 7/8 HWH with washer | screw | 1/4; 14tpi; .875in; head=hex washer; washer=washer
    1/4-14 x 7/8 hex washer head w/washer | screw | 1/4; 14tpi; .875in; head=hex washer; washer=washer
    1/4-14 x 7/8 HWH + washer | screw | 1/4; 14tpi; .875in; head=hex washer; washer=washer
    1/4-14 x 7/8 HWH w/ EPDM washer | screw | 1/4; 14tpi; .875in; head=hex washer; washer=bonded; rubber=EPDM
    1/4-14 x 7/8 HWH w/ bonded washer | screw | 1/4; 14tpi; .875in; head=hex washer; washer=bonded
    1/4-14 x 7/8 HWH w/ neoprene | screw | 1/4; 14tpi; .875in; head=hex washer; washer=bonded; rubber=neoprene
    1/4-14 x 7/8 HWH w/ 5/8 washer | screw | 1/4; 14tpi; .875in; head=hex washer; washer=washer; wd=.625
    1/4-14 x 7/8 HWH w/ 5/8" OD bonded EPDM washer | screw | 1/4; 14tpi; .875in; head=hex washer; washer=bonded; wd=.625; rubber=EPDM
    12-11 x 2, hex washer, type 17, 0.625 in washer | screw | #12; 11tpi; 2in; head=hex washer; point=type 17; washer=washer; wd=.625
    12-14 x 2 HWH w/ domed stainless washer | screw | #12; 14tpi; 2in; head=hex washer; washer=washer; shape=domed; wmetal=stainless
    12-14 x 1 HWH SS bonded washer | screw | #12; 14tpi; 1in; head=hex washer; washer=bonded; wmetal=stainless; ?the metal is taken as the washer's
    5.5 x 25 mm HWH w/ 16 mm washer | screw | d 5.5mm; 25mm; head=hex washer; washer=washer; wd=0.6299212598425197
    14-10 x 2 T17 HWH w/ bonded washer 304 | screw | #14; 10tpi; 2in; point=type 17; head=hex washer; washer=bonded; metal=stainless 304
    12-14 x 1-1/2" HWH w/bond seal washer | screw | #12; 14tpi; 1.5in; head=hex washer; washer=bonded
    1/4-14 x 7/8" HWH w/ 9/16" EPDM | screw | 1/4; 14tpi; .875in; head=hex washer; washer=bonded; wd=.5625; rubber=EPDM
    M5.5 x 25mm x 16mm washer | screw | d 5.5mm; 25mm; washer=washer; ~16mm
    10-16 x 1 HWH w/o washer | screw | #10; 16tpi; 1in; head=hex washer; washer=none
    10-16 x 1 HWH no washer | screw | #10; 16tpi; 1in; head=hex washer; washer=none`,
  'metals, coatings and colours': `
    No. 10 x 1-1/2 woodscrew SS | screw | #10; 1.5in; duty=wood; metal=stainless; ?grade is not said
    10-13 x 1 304 SS | screw | #10; 13tpi; 1in; metal=stainless 304
    10-13 x 1 SS304 | screw | #10; 13tpi; 1in; metal=stainless 304
    10-13 x 1 304SS | screw | #10; 13tpi; 1in; metal=stainless 304
    10-13 x 1 304 stainless steel | screw | #10; 13tpi; 1in; metal=stainless 304
    10-13 x 1 type 316 | screw | #10; 13tpi; 1in; metal=stainless 316
    10-13 x 1 316 | screw | #10; 13tpi; 1in; metal=stainless 316
    10-16 x 1 410 SS | screw | #10; 16tpi; 1in; metal=stainless 410
    10-16 x 1 A2 | screw | #10; 16tpi; 1in; metal=stainless 304
    10-16 x 1 18-8 | screw | #10; 16tpi; 1in; metal=stainless 304; ?is a family
    10-16 x 1 bi-metal | screw | #10; 16tpi; 1in; metal=bi-metal 304; ?which stainless
    10-16 x 1 bimetal 304 | screw | #10; 16tpi; 1in; metal=bi-metal 304
    10-16 x 1 stainless | screw | #10; 16tpi; 1in; metal=stainless; ?grade is not said
    10-16 x 1 zinc | screw | #10; 16tpi; 1in; coating=zinc electroplate
    10-16 x 1 zinc plated | screw | #10; 16tpi; 1in; coating=zinc electroplate
    10-16 x 1 zinc-plated steel | screw | #10; 16tpi; 1in; coating=zinc electroplate; metal=carbon steel
    10-16 x 1 ZP | screw | #10; 16tpi; 1in; coating=zinc electroplate
    10-16 x 1 galv | screw | #10; 16tpi; 1in; coating=galvanized; ?process is not said
    10-16 x 1 galvanized | screw | #10; 16tpi; 1in; coating=galvanized; ?process is not said
    10-14 x 1 HDG | screw | #10; 14tpi; 1in; coating=hot-dip zinc
    10-14 x 1 hot-dip galvanized | screw | #10; 14tpi; 1in; coating=hot-dip zinc
    10-14 x 1 hot dipped galv | screw | #10; 14tpi; 1in; coating=hot-dip zinc
    10-14 x 1 mech galv | screw | #10; 14tpi; 1in; coating=mechanical zinc class 55
    10-14 x 1 1000 h coated | screw | #10; 14tpi; 1in; coating=organic topcoat over zinc 1000 h
    10-14 x 1 cast head | screw | #10; 14tpi; 1in; coating=zinc-aluminium cast head
    10-14 x 1 painted white | screw | #10; 14tpi; 1in; coating=painted; colour=white
    10-14 x 1 barn red | screw | #10; 14tpi; 1in; colour=barn red
    10-14 x 1 light grey | screw | #10; 14tpi; 1in; colour=light grey
    10-14 x 1 dark bronze | screw | #10; 14tpi; 1in; colour=dark bronze
    10-14 x 1 black | screw | #10; 14tpi; 1in; colour=black; ?black oxide
    10-14 x 1 bronze | screw | #10; 14tpi; 1in; colour=bronze; ?or the metal`,
  'lags, bolts and duties': `
    1/4 x 3 lag | screw | 1/4; 3in; duty=lag
    1/4 x 3 lag screw | screw | 1/4; 3in; duty=lag
    lag 5/16 x 4 in | screw | 5/16; 4in; duty=lag
    3/8 lag 4 in | screw | 3/8; 4in; duty=lag
    3/8" x 4" lag bolt HDG | screw | 3/8; 4in; duty=lag; coating=hot-dip zinc
    1/4-20 x 2 machine screw | screw | 1/4; 20tpi; 2in; thread=machine
    5/8 x 6" carriage bolt | bolt | 5/8; 6in
    1/2-13 x 2 bolt | bolt | 1/2; 13tpi; 2in
    1"-8 x 6 bolt | bolt | d 1; 8tpi; 6in
    10 x 1-1/2 wood screw | screw | #10; 1.5in; duty=wood
    10-14 x 1 metal-to-wood HWH | screw | #10; 14tpi; 1in; duty=wood; head=hex washer
    1/4-14 x 7/8 stitch screw | screw | 1/4; 14tpi; .875in; duty=stitch
    1/4-14 x 7/8 lap screw | screw | 1/4; 14tpi; .875in; duty=stitch
    8 x 1/2 sheet metal screw | screw | #8; .5in; duty=steel`,
  'counts in front and behind': `
    500 - 10-13 x 1 | screw | n=500; of=pieces; #10; 13tpi; 1in
    500-10-13 x 1 | screw | n=500; of=pieces; #10; 13tpi; 1in
    500 10-13 x 1 | screw | n=500; of=pieces; #10; 13tpi; 1in
    (500) 10-13 x 1 | screw | n=500; of=pieces; #10; 13tpi; 1in
    500 pcs 10-13 x 1 | screw | n=500; of=pieces; #10; 13tpi; 1in
    500pcs. 10-13 x 1 | screw | n=500; of=pieces; #10; 13tpi; 1in
    500 ea #10 x 1 | screw | n=500; of=pieces; #10; 1in
    1,000 10-16 x 3/4 | screw | n=1000; of=pieces; #10; 16tpi; .75in
    10-16 x 3/4, 2000 pcs | screw | n=2000; of=pieces; #10; 16tpi; .75in
    qty 40 12-14 x 1 | screw | n=40; of=pieces; #12; 14tpi; 1in
    12-14 x 1 qty: 40 | screw | n=40; of=pieces; #12; 14tpi; 1in
    2 boxes of 10-16 x 3/4 pancake | screw | n=2; of=boxes; #10; 16tpi; .75in; head=pancake
    1 box #10 x 1 | screw | n=1; of=boxes; #10; 1in
    a box of #10 x 1 | screw | n=1; of=boxes; #10; 1in
    3 bags 1/4-14 x 7/8 | screw | n=3; of=bags; 1/4; 14tpi; .875in
    100 1/4-14 x 7/8 | screw | n=100; of=pieces; 1/4; 14tpi; .875in
    12 10-16 x 1 | screw | n=12; of=pieces; #10; 16tpi; 1in
    500 screws 10-16 x 1 | screw | n=500; of=pieces; #10; 16tpi; 1in
    250 wood screws #9 x 1 1/2 | screw | n=250; of=pieces; #9; 1.5in; duty=wood
    2x 10-16 x 1 | screw | n=2; of=pieces; #10; 16tpi; 1in
    10-16 x 1 - 500 pcs | screw | n=500; of=pieces; #10; 16tpi; 1in
    10-16 x 1, 5 boxes | screw | n=5; of=boxes; #10; 16tpi; 1in
    10-16 x 1 (500/box) | screw | #10; 16tpi; 1in; ~500/box
    50 M5.5x25 | screw | n=50; of=pieces; d 5.5mm; 25mm
    10-10-16 x 1 | screw | n=10; of=pieces; #10; 16tpi; 1in; ?may belong to the size
    2 1/4 x 3 lag | screw | n=2; 1/4; 3in; duty=lag; ?cannot be a diameter`,
  Spanish: `
    tornillo 10-16 x 1 | screw | #10; 16tpi; 1in
    tornillos 10-16 x 1 pulgada | screw | #10; 16tpi; 1in
    pija 10 x 1 1/2 pulgadas | screw | #10; 1.5in
    pija #12 x 2 inox 304 | screw | #12; 2in; metal=stainless 304
    tornillo autoperforante 1/4-14 x 7/8 con arandela | screw | 1/4; 14tpi; .875in; point=drill; washer=washer
    tornillo 10-16 x 1 cabeza hexagonal con rondana de neopreno | screw | #10; 16tpi; 1in; head=hex; washer=bonded; rubber=neoprene
    tornillo 10-16 x 1 punta de broca galvanizado | screw | #10; 16tpi; 1in; point=drill; coating=galvanized; ?process is not said
    tornillo 10-16 x 1 cabeza plana acero inoxidable | screw | #10; 16tpi; 1in; head=flat; metal=stainless; ?grade is not said
    pija 10 x 1 punta aguda pintada rojo | screw | #10; 1in; point=sharp; coating=painted; colour=rojo
    3 cajas de tornillo 12-14 x 1 | screw | n=3; of=boxes; #12; 14tpi; 1in
    200 piezas pija 10 x 1 | screw | n=200; of=pieces; #10; 1in
    tornillo 10-16 x 1 zincado cuadrado #2 | screw | #10; 16tpi; 1in; coating=zinc electroplate; drive=No. 2 square bit
    tornillo número 10 x 1 | screw | #10; 1in
    tirafondo 1/4 x 3 | screw | 1/4; 3in; duty=lag
    perno 1/2 x 6 | bolt | 1/2; 6in`,
  misspelled: `
    10-16 x 1 waffer head | screw | #10; 16tpi; 1in; head=wafer; ?"waffer" is taken for "wafer"
    10-16 x 1 pancacke | screw | #10; 16tpi; 1in; head=pancake; ?"pancacke" is taken for "pancake"
    10-16 x 1 pancke | screw | #10; 16tpi; 1in; head=pancake; ?is taken for
    10-14 x 1 galvanzied | screw | #10; 14tpi; 1in; coating=galvanized; ?is taken for; ?process is not said
    10-16 x 1 stainles | screw | #10; 16tpi; 1in; metal=stainless; ?is taken for; ?grade is not said
    10-16 x 1 sqaure drive | screw | #10; 16tpi; 1in; drive=square bit; ?is taken for
    tronillo 10-16 x 1 | screw | #10; 16tpi; 1in; ?is taken for`,
  'ambiguous or impossible': `
    12-14 | screw | #12; 14tpi; ?or a range of sizes 12 to 14
    #10-12 | screw | #10; 12tpi; ?or a range of sizes 10 to 12
    8-18 | screw | #8; 18tpi
    8 x 25 mm | screw | d 8mm; 25mm; ?8 mm, or screw number 8
    4.8 x 35 | screw | d 4.8mm; 35mm; ?has no unit
    10 x 100 | screw | #10; ?neither is taken; ?no possible length
    10 x 20 | screw | #10; 20in; ?inches are taken
    8-1/2 screw | screw | #8; .5in; ?or 8 1/2 in
    1/4 pancake | screw | 1/4; head=pancake; ?a diameter or a length
    1 1/2 pancake | screw | 1.5in; head=pancake
    12 screw | screw | #12; ?or a length
    #0 x 1/4 | screw | #0; .25in
    #0 x 0 | screw | #0; ?no possible length
    #99 x 1 | unknown | 1in; ?no screw has this number
    10-400 x 1 | screw | #10; 1in; ?no possible number of threads
    12-14 x 99 | screw | #12; 14tpi; ?neither is taken; ?no possible length
    1/0-14 x 1 | screw | 14tpi; 1in; ?no possible diameter
    10-16 x -1 | screw | #10; 16tpi; ~-1; ?never less than nothing
    10-16 x 3/7 | screw | #10; 16tpi; length_in=0.42857142857142855; ?no fraction as a rule shows it
    10 16 x 1 | screw | n=10; of=pieces; diameterName=#16; diameter_in=.268; 1in; ?may belong to the size
    10/16 x 1 | screw | 5/8; 1in; ?no fraction as a rule shows it
    10-16 x 1 not painted | screw | #10; 16tpi; 1in; ~not painted; ?says what it is not
    10-16 x 1 non-galv | screw | #10; 16tpi; 1in; ~non-galv; ?says what it is not
    1/4x20 bolt | bolt | 1/4; 20in; ?inches are taken
    1e999 x 1 | unknown | ~1e999; ~1
    99999999999999 x 1 | unknown | ~99999999999999; ~1
    10-16 x 1 blorfex | screw | #10; 16tpi; 1in; ~blorfex
    #10 x 1 in x 5/8 | screw | #10; 1in; ~5/8
    10-16 x 1 x2000 | screw | #10; 16tpi; 1in; ~x2000
    roof paint | unknown | coating=painted; ~roof
    10-16 x 1 pancake HWH | screw | #10; 16tpi; 1in; head=pancake; ?both say the head`,
};

for (const [family, table] of Object.entries(families))
  describe(`screws: ${family}`, () => {
    const rows = writtenForms(table);
    for (const row of rows)
      test(`"${row.text}" is read as written`, () => {
        const read = readDesignation(row.text);
        expect(designationValues(read)).toEqual(row.values);
        expect(read.kind).toBe(row.kind);
        expect(read.leftovers.map(({ text }) => text)).toEqual(row.leftovers);
        expect(read.doubts.length, read.doubts.join('\n')).toBe(row.doubts.length);
        for (const part of row.doubts) expect(read.doubts.join('\n')).toContain(part);
      });
  });
