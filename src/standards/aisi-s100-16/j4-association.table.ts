/**
 * Screw table of the steel framing associations: ASD, safety factor 3.0, two equal sheets, spacing 3 d, edge 1.5 d, on
 * the basis of AISI S100-07/-12 E4 (the equations of S100-16 J4). Whole pounds. Rows of 18 and 27 mil published (municipal
 * permit records), the rest computed and equal to the recalled table. Cells: shear / pull-out / pull-over.
 */
import { textTable } from '../aisi-s100-common/text-table.ts';

/** Header of the table: diameter and head in inches, shear and tension strength of the screw itself in pounds. */
export const associationScrews = {
  6: { d: 0.138, head: 0.272, shear: 643, tension: 419 },
  8: { d: 0.164, head: 0.272, shear: 1278, tension: 586 },
  10: { d: 0.19, head: 0.34, shear: 1644, tension: 1158 },
  12: { d: 0.216, head: 0.34, shear: 2330, tension: 2325 },
  14: { d: 0.25, head: 0.409, shear: 3048, tension: 3201 },
} as const;
export const associationSizes = [6, 8, 10, 12, 14] as const;

const columns = [
  't',
  'Fu',
  'shear6',
  'out6',
  'over6',
  'shear8',
  'out8',
  'over8',
  'shear10',
  'out10',
  'over10',
  'shear12',
  'out12',
  'over12',
  'shear14',
  'out14',
  'over14',
] as const;

/** Origin: published. Columns: shear, pull-out, pull-over of each screw in turn. */
export const publishedAssociationRows = textTable(
  columns,
  `
18-mil-Fu-33  0.0188  33  44  24   84  48  29   84  52  33  105   55  38  105   60  44  127
27-mil-Fu-33  0.0283  33  82  37  127  89  43  127  96  50  159  102  57  159  110  66  191
`,
);

/** Origin: computed. */
export const computedAssociationRows = textTable(
  columns,
  `
30-mil-Fu-33   0.0312  33   95   40  140  103   48  140  111   55  175  118   63  175   127   73   211
33-mil-Fu-45   0.0346  45  151   61  140  164   72  195  177   84  265  188   95  265   203  110   318
43-mil-Fu-45   0.0451  45  214   79  140  244   94  195  263  109  345  280  124  345   302  144   415
54-mil-Fu-45   0.0566  45  214  100  140  344  118  195  370  137  386  394  156  433   424  180   521
68-mil-Fu-45   0.0713  45  214  125  140  426  149  195  523  173  386  557  196  545   600  227   656
97-mil-Fu-45   0.1017  45  214  140  140  426  195  195  548  246  386  777  280  775  1016  324   936
118-mil-Fu-45  0.1242  45  214  140  140  426  195  195  548  301  386  777  342  775  1016  396  1067
54-mil-Fu-65   0.0566  65  214  140  140  426  171  195  534  198  386  569  225  625   613  261   752
68-mil-Fu-65   0.0713  65  214  140  140  426  195  195  548  249  386  777  284  775   866  328   948
97-mil-Fu-65   0.1017  65  214  140  140  426  195  195  548  356  386  777  405  775  1016  468  1067
118-mil-Fu-65  0.1242  65  214  140  140  426  195  195  548  386  386  777  494  775  1016  572  1067
`,
);

/** Older layout, about 2001 to 2010: shear and pull-out only, not capped by the screw. Computed. */
export const olderAssociationRows = textTable(
  ['t', 'Fu', 'd', 'shear', 'out'],
  `
33-mil-Fu-45-#8   0.0346  45  0.164   164   72
33-mil-Fu-45-#10  0.0346  45   0.19   177   84
33-mil-Fu-45-#12  0.0346  45  0.216   188   95
43-mil-Fu-45-#8   0.0451  45  0.164   244   94
43-mil-Fu-45-#10  0.0451  45   0.19   263  109
54-mil-Fu-65-#8   0.0566  65  0.164   496  171
54-mil-Fu-65-#12  0.0566  65  0.216   569  225
68-mil-Fu-65-#8   0.0713  65  0.164   684  215
68-mil-Fu-65-#10  0.0713  65   0.19   755  249
68-mil-Fu-65-#12  0.0713  65  0.216   805  284
97-mil-Fu-65-#10  0.1017  65   0.19  1130  356
97-mil-Fu-65-#12  0.1017  65  0.216  1285  405
`,
);
