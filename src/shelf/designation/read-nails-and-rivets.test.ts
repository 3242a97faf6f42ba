import { describe, expect, test } from 'vitest';
import { readDesignation } from './read-designation.ts';
import { designationValues } from './reading.ts';
import { writtenForms } from './written-forms.ts';

// Penny sizes: NDS table L4 (published for common 6d to 60d and the box and sinker sizes tested here).
// Rivet numbers: common practice; the rest of the rows: common practice, no source.
const families: Readonly<Record<string, string>> = {
  'nails by penny': `
    6d common | nail | 6d; type=common; diameterName=6d; diameter_in=.113; 2in
    8d common | nail | 8d; type=common; diameterName=8d; diameter_in=.131; 2.5in
    8 d common nail | nail | 8d; type=common; diameterName=8d; diameter_in=.131; 2.5in
    8 penny common | nail | 8d; type=common; diameterName=8d; diameter_in=.131; 2.5in
    10d common | nail | 10d; type=common; diameterName=10d; diameter_in=.148; 3in
    12d common nails | nail | 12d; type=common; diameterName=12d; diameter_in=.148; 3.25in
    16d common galv | nail | 16d; type=common; diameterName=16d; diameter_in=.162; 3.5in; coating=galvanized; ?process is not said
    20d common | nail | 20d; type=common; diameterName=20d; diameter_in=.192; 4in
    60d common | nail | 60d; type=common; diameterName=60d; diameter_in=.263; 6in
    8d box | nail | 8d; type=box; diameterName=8d; diameter_in=.113; 2.5in
    10d box nail | nail | 10d; type=box; diameterName=10d; diameter_in=.128; 3in
    16d box | nail | 16d; type=box; diameterName=16d; diameter_in=.135; 3.5in
    8d sinker | nail | 8d; type=sinker; diameterName=8d; diameter_in=.113; 2.375in
    16d sinker | nail | 16d; type=sinker; diameterName=16d; diameter_in=.148; 3.25in
    5 lb 8d common | nail | n=5; of=pounds; 8d; type=common; diameterName=8d; diameter_in=.131; 2.5in
    2 boxes 16d sinkers | nail | n=2; of=boxes; 16d; type=sinker; diameterName=16d; diameter_in=.148; 3.25in
    8d common, 0.131 x 2 1/2 | nail | 8d; type=common; d .131; 2.5in
    8d common .113 x 2 1/2 | nail | 8d; type=common; d .113; 2.5in; ?both say the diameter
    8d common HDG | nail | 8d; type=common; diameterName=8d; diameter_in=.131; 2.5in; coating=hot-dip zinc
    8d common smooth shank | nail | 8d; type=common; diameterName=8d; diameter_in=.131; 2.5in; shank=smooth
    8d RS | nail | 8d; shank=ring; ?0.113 x 2 3/8
    8d ring shank | nail | 8d; shank=ring; ?0.113 x 2 3/8
    8d common ring shank | nail | 8d; type=common; diameterName=8d; diameter_in=.131; 2.5in; shank=ring
    8d | nail | 8d; ?type is not said
    16d nails | nail | 16d; ?type is not said
    3d x 1-1/4 nail | nail | 3d; 1.25in; ?type is not said
    6d cooler | nail | 6d; type=cooler; ?stand in no table
    99d common | nail | type=common; ?2d to 60d
    clavo 8d común | nail | 8d; type=common; diameterName=8d; diameter_in=.131; 2.5in`,
  'nails by diameter and length': `
    .113 x 2-3/8 ring shank | nail | d .113; 2.375in; shank=ring
    .113" x 2-3/8" ring shank nail | nail | d .113; 2.375in; shank=ring
    0.113 x 2 3/8 RS | nail | d .113; 2.375in; shank=ring
    .113x2⅜ ring-shank | nail | d .113; 2.375in; shank=ring
    2-3/8 x .113 ring shank | nail | d .113; 2.375in; shank=ring
    2 3/8" x .113" RSRS | nail | d .113; 2.375in; shank=ring
    2 1/2 x .131 nail | nail | d .131; 2.5in
    .131 x 2 1/2 smooth nail | nail | d .131; 2.5in; shank=smooth
    nail 0.131 in x 2 1/2 in, smooth shank | nail | d .131; 2.5in; shank=smooth
    .120 x 3 screw shank nail | nail | d .12; 3in; shank=screw
    .120 x 3 spiral nail | nail | d .12; 3in; shank=screw
    roof sheathing ring shank 0.131 x 2 1/2, hot-dip galvanized | nail | d .131; 2.5in; shank=ring; coating=hot-dip zinc
    .113 x 2 3/8 annular ring nail 304 ss | nail | d .113; 2.375in; shank=ring; metal=stainless 304
    11 ga x 1 3/4 roofing nail | nail | diameterName=11 ga; diameter_in=.12; 1.75in; type=roofing
    11 gauge 1-1/4" EG roofing nails | nail | diameterName=11 ga; diameter_in=.12; 1.25in; type=roofing; coating=zinc electroplate
    1 1/2 roofing nail copper | nail | 1.5in; type=roofing; metal=copper
    3.1 x 75 mm nail | nail | d 3.1mm; 75mm
    2.8 x 63 nail ring | nail | d 2.8mm; 63mm; shank=ring; ?has no unit
    1000 .113 x 2 3/8 ring shank nails | nail | n=1000; of=pieces; d .113; 2.375in; shank=ring
    clavo 2 1/2 x .131 anillado | nail | d .131; 2.5in; shank=ring
    clavos .131 x 2 1/2 pulgadas liso | nail | d .131; 2.5in; shank=smooth
    .131 x -2 nail | nail | d .131; ~-2; ?never less than nothing
    0 x 2 nail | nail | 2in; ?no possible diameter`,
  'rivets by number': `
    43 | rivet | 1/8; to=.1875; ?no word says so
    4-3 | rivet | 1/8; to=.1875; ?no word says so
    43 rivet | rivet | 1/8; to=.1875
    4-3 rivet | rivet | 1/8; to=.1875
    #43 blind rivet | rivet | 1/8; to=.1875
    rivet 42 | rivet | 1/8; to=.125
    rivet 4-2 | rivet | 1/8; to=.125
    rivet #44 | rivet | 1/8; to=.25
    blind rivet 5-3 | rivet | 5/32; to=.1875
    54 rivets | rivet | 5/32; to=.25
    64 blind rivet | rivet | 3/16; to=.25
    6-8 rivet | rivet | 3/16; to=.5
    34 rivet | rivet | 3/32; to=.25
    812 rivet | rivet | 1/4; to=.75
    8-12 rivet | rivet | 1/4; to=.75
    84 rivet steel | rivet | 1/4; to=.25; metal=carbon steel
    remache 4-3 | rivet | 1/8; to=.1875
    remaches 43 aluminio | rivet | 1/8; to=.1875; metal=aluminium
    blind rivet 4-3, aluminium 5056 | rivet | 1/8; to=.1875; metal=aluminium
    blind rivet 4-3, 304 stainless | rivet | 1/8; to=.1875; metal=stainless 304
    43 rivet sealed white | rivet | 1/8; to=.1875; sealed=true; colour=white
    43 closed end rivet | rivet | 1/8; to=.1875; sealed=true
    43 open-end rivet | rivet | 1/8; to=.1875; sealed=false
    43 rivet SS/SS | rivet | 1/8; to=.1875; metal=stainless; mandrel=stainless
    43 Al/St | rivet | 1/8; to=.1875; metal=aluminium; mandrel=carbon steel
    43 rivet dome head | rivet | 1/8; to=.1875; head=dome
    43 rivet large flange | rivet | 1/8; to=.1875; head=large flange
    500 pcs 43 rivet | rivet | n=500; of=pieces; 1/8; to=.1875
    4-3 rivet grip .126-.187 | rivet | 1/8; from=.126; to=.187
    4-3 rivet grip .188-.250 | rivet | 1/8; from=.188; to=.25; ?not the one of the rivet number
    4-99 rivet | rivet | ?no rivet number; ~4-99`,
  'rivets by diameter': `
    1/8 x 1/8 blind rivet | rivet | 1/8; to=.125; ?length of the body
    1/8 x 1/4 rivet | rivet | 1/8; to=.25; ?length of the body
    3/16" x 1/2" rivet | rivet | 3/16; to=.5; ?length of the body
    1/8 x 1/4 grip rivet | rivet | 1/8; to=.25
    5/32 x 1/4 in grip rivet | rivet | 5/32; to=.25
    1/8 x 1/2 long rivet | rivet | 1/8; .5in
    rivet 1/8" grip .126-.187 | rivet | 1/8; from=.126; to=.187
    rivet 1/8 grip 1/8 - 3/16 | rivet | 1/8; from=.125; to=.1875
    rivet 1/8" grip range .126" - .187" | rivet | 1/8; from=.126; to=.187
    rivet 5/32 grip .126 to .187 in | rivet | 5/32; from=.126; to=.187
    rivet 1/8 .126-.187 grip | rivet | 1/8; from=.126; to=.187
    rivet 1/8 max grip 3/16 | rivet | 1/8; to=.1875
    rivet 1/8 grip .187-.126 | rivet | 1/8; from=.187; to=.126; ?the first is the greater
    rivet 1/8 | rivet | 1/8
    1/8" aluminum blind rivets | rivet | 1/8; metal=aluminium
    4.8 x 12 mm rivet | rivet | d 4.8mm; 12mm
    3.2x8 rivet | rivet | d 3.2mm; 8mm; ?has no unit
    4 x 10 mm blind rivet A2/A2 | rivet | d 4mm; 10mm; metal=stainless 304; mandrel=stainless 304
    remache 1/8 agarre .126-.187 | rivet | 1/8; from=.126; to=.187`,
};

for (const [family, table] of Object.entries(families))
  describe(family, () => {
    for (const row of writtenForms(table))
      test(`"${row.text}" is read as written`, () => {
        const read = readDesignation(row.text);
        expect(designationValues(read)).toEqual(row.values);
        expect(read.kind).toBe(row.kind);
        expect(read.leftovers.map(({ text }) => text)).toEqual(row.leftovers);
        expect(read.doubts.length, read.doubts.join('\n')).toBe(row.doubts.length);
        for (const part of row.doubts) expect(read.doubts.join('\n')).toContain(part);
      });
  });
