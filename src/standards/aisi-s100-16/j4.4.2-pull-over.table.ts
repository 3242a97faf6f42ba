/**
 * Pull-over of both editions, computed by an independent program: effective diameter, nominal and ASD of S100-16
 * (1.5, Ω 3.00), its half for a pull on one side, nominal and ASD of S100-16 w/S3-22 (0.90, Ω 2.90). Pounds to a tenth.
 */
import { textTable } from '../aisi-s100-common/text-table.ts';

export const headRows = textTable(
  ['t1', 'Fu1', 'dh', 'dwe', 'nominal', 'ASD', 'half', 'nominal2022', 'ASD2022'],
  `
hex-washer-head-no-washer          0.0239  65000  0.415  0.415   967.1  322.4  161.2   580.2  200.1
hex-washer-head-no-washer-cap-3/4  0.0239  65000    0.8   0.75  1747.7  582.6  291.3  1048.6  361.6
hex-washer-head-1/4                0.0299  45000    0.5    0.5  1009.1  336.4  168.2   605.5  208.8
`,
);

export const washerRows = textTable(
  ['t1', 'Fu1', 'dh', 'dw', 'tw', 'dwe', 'nominal', 'ASD', 'half', 'nominal2022', 'ASD2022'],
  `
hex-washer-head-solid-steel-washer        0.0239  65000  0.415   0.625   0.05  0.5389  1255.8  418.6  209.3  753.5  259.8
domed-washer                              0.0179  62000   0.43    0.75  0.036  0.5199   865.5  288.5  144.2  519.3  179.1
hex-washer-head-bonded-washer-thin-sheet  0.0179  62000  0.415  0.5625  0.024  0.4809   800.6  266.9  133.4  480.3  165.6
`,
);
