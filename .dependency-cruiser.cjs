// The architecture, as rules that fail a build. Each folder of src is a layer and may import
// only from itself and from the layers before it. docs/decisions/0001 says why.
const layers = [
  'quantities', // numbers that know their unit
  'trace', // equations, steps, refusals, verdicts
  'standards', // one folder per document edition, one file per clause
  'materials',
  'shelf', // fasteners, clips, washers, prices, test values
  'job', // the saved document
  'roof', // planes, edges, supports, runs
  'site', // wind
  'connections', // every joint of the roof
  'links', // one check each
  'choose',
  'layout',
  'takeoff',
  'answer', // the pipeline
  'papers', // model in, page or drawing out
];

const anyOf = (names) => `(${names.join('|')})`;
const test = '\\.test\\.ts$';

const layerRules = layers.slice(0, -1).map((layer, index) => ({
  name: `${layer}-imports-only-from-before-it`,
  severity: 'error',
  from: { path: `^src/${layer}/` },
  to: { path: `^src/${anyOf(layers.slice(index + 1))}/` },
}));

/** A package that one layer wraps, so that no other layer depends on it. */
const onlyFrom = (layer, packages) => ({
  name: `${packages[0].replace(/[^a-z0-9]+/gi, '-').replace(/^-/, '')}-only-in-${layer}`,
  severity: 'error',
  from: { path: '^(src|apps)/', pathNot: `^src/${layer}/` },
  to: { path: `(^|/)node_modules/(@types/)?${anyOf(packages)}(/|$)` },
});

module.exports = {
  forbidden: [
    ...layerRules,
    {
      name: 'src-has-only-known-layers',
      comment: 'A new layer needs a decision record and a place in the list above.',
      severity: 'error',
      from: { path: '^src/', pathNot: `^src/${anyOf(layers)}/` },
      to: {},
    },
    {
      name: 'src-imports-only-src-and-packages',
      severity: 'error',
      from: { path: '^src/' },
      to: {
        pathNot: [`^src/${anyOf(layers)}/`, 'node_modules/'],
        dependencyTypesNot: ['core', 'npm', 'npm-dev'],
      },
    },
    {
      name: 'apps-only-call-answer-and-papers',
      comment: 'Apps parse, call and show. From the layers below they may take types, no code.',
      severity: 'error',
      from: { path: '^apps/', pathNot: test },
      to: { path: '^src/', pathNot: '^src/(answer|papers)/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'engine-without-node',
      comment: 'The engine runs unchanged in a browser: no file, clock, network, process.',
      severity: 'error',
      from: { path: '^src/', pathNot: ['^src/papers/', test] },
      to: { dependencyTypes: ['core'] },
    },
    onlyFrom('papers', ['pdfkit', 'exceljs', '@expo-google-fonts']),
    onlyFrom('roof', ['clipper2-ts']),
    { name: 'no-cycles', severity: 'error', from: { path: '^(src|apps)/' }, to: { circular: true } },
    {
      name: 'no-barrels',
      comment: 'Inner index.ts files tie everything into one ring. Import the file itself.',
      severity: 'error',
      from: {},
      to: { path: '^src/.*(^|/)index\\.(ts|js|mts|mjs)$' },
    },
    {
      name: 'no-barrels-of-own',
      severity: 'error',
      from: { path: '^src/.*(^|/)index\\.(ts|js|mts|mjs)$' },
      to: {},
    },
    {
      name: 'no-orphans',
      severity: 'error',
      from: { orphan: true, path: '^(src|apps)/', pathNot: '\\.d\\.ts$' },
      to: {},
    },
    {
      name: 'source-never-imports-tests',
      severity: 'error',
      from: { path: '^(src|apps)/', pathNot: test },
      to: { path: [test, '^(test|bench|scripts)/'] },
    },
    {
      name: 'source-needs-runtime-dependencies',
      comment: 'What ships may not stand on a development tool.',
      severity: 'error',
      from: { path: '^(src|apps)/', pathNot: test },
      to: { dependencyTypes: ['npm-dev'], dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'declared-packages-only',
      severity: 'error',
      from: { path: '^(src|apps)/' },
      to: { dependencyTypes: ['npm-no-pkg', 'npm-unknown'] },
    },
    { name: 'resolvable', severity: 'error', from: { path: '^(src|apps)/' }, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(dist|out|coverage)/' },
    // Imports of types count too: they tie layers together as much as code does.
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      extensions: ['.ts', '.mjs', '.js', '.cjs', '.json', '.d.ts'],
    },
  },
};
