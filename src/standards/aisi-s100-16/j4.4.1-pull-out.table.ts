/**
 * Pull-out of both editions, computed by an independent program: nominal and ASD of S100-16 (Ω 3.00), factor, nominal,
 * ASD (Ω 2.80) and LRFD (φ 0.55) of S100-16 w/S3-22. Pounds to a tenth, factor to 0.0001; inches and psi.
 */
import { textTable } from '../aisi-s100-common/text-table.ts';

export const pullOutRows = textTable(
  ['tc', 'd', 'Fu2', 'nominal', 'ASD', 'factor', 'nominal2022', 'ASD2022', 'LRFD2022'],
  `
pull-out-01  0.0346   0.19  45000   251.5    83.8  0.8897   223.7    79.9   123.0
pull-out-02  0.0451  0.216  45000   372.6   124.2  0.9331   347.7   124.2   191.2
pull-out-04  0.0598   0.25  65000   826.0   275.3  0.9817   810.9   289.6   446.0
pull-out-05  0.0713   0.25  65000   984.8   328.3  1.0133   997.9   356.4   548.9
pull-out-06  0.1017   0.25  65000  1404.7   468.2  1.0802  1517.4   541.9   834.6
pull-out-07   0.105  0.216  65000  1253.1   417.7  1.0864  1361.4   486.2   748.8
pull-out-08   0.125   0.25  58000  1540.6   513.5  1.1211  1727.1   616.8   949.9
pull-out-10    0.25   0.25  58000  3081.2  1027.1    1.27  3913.3  1397.6  2152.3
pull-out-11  0.0299  0.216  45000   247.0    82.3  0.8666   214.1    76.5   117.7
pull-out-13  0.0179   0.25  62000   235.8    78.6  0.7901   186.3    66.5   102.5
pull-out-14  0.0359   0.19  45000   260.9    87.0  0.8956   233.7    83.4   128.5
`,
);
