import tseslint from 'typescript-eslint'

// Earlier layers only: a reader can start at the left and never look right.
const LAYERS = [
  'units',
  'words',
  'model',
  'chemistry',
  'knowledge',
  'graph',
  'formula',
  'calculate',
  'ph',
  'preservation',
  'checks',
  'dose',
  'swap',
  'batch',
  'label',
  'formulate',
  'learn',
]

// Folder, what it may import, what it may import as a type only. A name that ends in / or : covers all below it.
const AREAS = [
  [
    'server/engine',
    ['#engine/', 'graphology', 'graphology-gexf', 'graphology-traversal', 'graphology-types', 'typebox'],
  ],
  ['server/contract', ['#contract/', '#engine/model/', 'typebox']],
  ['server/answers', ['#answers/', '#contract/', '#engine/index.ts', 'typebox']],
  ['server/load', ['#load/', '#engine/index.ts', 'node:', 'js-yaml', 'typebox']],
  ['server/api', ['#api/', '#answers/', '#contract/', '#engine/index.ts', 'fastify', '@fastify/', 'typebox']],
  [
    'web',
    ['#web/', 'react', 'react-dom', 'wouter', '@tanstack/react-query', 'ts-fsrs', 'sigma', 'graphology'],
    ['#contract/api.ts'],
  ],
  // The page's own engine: the one folder that may load what the server loads.
  ['web/offline', ['#web/', '#answers/ask.ts', '#engine/index.ts', 'react', 'node:', 'vite']],
  ...LAYERS.map((layer, i) => [
    `server/engine/${layer}`,
    [
      ...['graphology', 'graphology-gexf', 'graphology-traversal', 'graphology-types', 'typebox'],
      ...LAYERS.slice(0, i + 1).map((earlier) => `#engine/${earlier}/`),
    ],
  ]),
]

/** Pattern of one allowed name: `react` covers react and react/jsx-runtime, not react-dom. */
const covers = (name) => (/[/:]$/.test(name) ? name : `${name}(?:/|$)`)

/** Stays in its own folder or goes below it. */
const NEAR = '\\./(?!.*\\.\\./)'

const allowOnly = (folder, files, may, types = []) => ({
  files,
  ignores: ['**/*.config.ts'],
  rules: {
    '@typescript-eslint/no-restricted-imports': [
      'error',
      {
        patterns: [
          {
            regex: `^(?!${[NEAR, ...may.map(covers), ...types.map(covers)].join('|')})`,
            message: `${folder} may import: ${[...may, ...types].join(' ')}`,
          },
          ...types.map((type) => ({
            regex: `^${covers(type)}`,
            allowTypeImports: true,
            message: `${folder} may import this as a type only`,
          })),
        ],
      },
    ],
  },
})

const IMPURE = [
  'Date',
  'console',
  'fetch',
  'process',
  'globalThis',
  'performance',
  'crypto',
  'setTimeout',
  'setInterval',
]

export default tseslint.config(
  { ignores: ['**/node_modules', 'web/dist', 'coverage', 'data'] },
  { linterOptions: { noInlineConfig: true, reportUnusedDisableDirectives: 'off' } },
  ...tseslint.configs.strict,
  {
    rules: {
      'max-lines': ['error', 300],
      'max-lines-per-function': ['error', { max: 60, skipComments: true, skipBlankLines: true }],
      eqeqeq: 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      // With verbatimModuleSyntax `import { type X }` still loads the module; `import type { X }` does not.
      '@typescript-eslint/no-import-type-side-effects': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
  ...AREAS.map(([folder, may, types]) => allowOnly(folder, [`${folder}/**/*.{ts,tsx}`], may, types)),
  allowOnly('server/main.ts', ['server/main.ts'], ['#api/', '#load/', 'node:', 'vite']),
  {
    files: ['server/engine/**/*.ts'],
    rules: {
      'no-restricted-globals': [
        'error',
        ...IMPURE.map((name) => ({ name, message: 'The engine is pure: let it come in as an argument.' })),
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'The engine is pure: let a seed come in as an argument.' },
      ],
    },
  },
  {
    // An import() escapes the lists above.
    files: ['server/{engine,contract,answers,load,api}/**/*.ts'],
    rules: {
      'no-restricted-syntax': ['error', { selector: 'ImportExpression', message: 'Import at the top of the file.' }],
    },
  },
  {
    files: ['server/{contract,answers,load,api}/**/*.ts'],
    rules: {
      'no-restricted-globals': [
        'error',
        { name: 'process', message: 'Only server/main.ts reads the environment; let it come in as an option.' },
      ],
    },
  },
  {
    files: ['test/**/*.{ts,tsx}'],
    rules: {
      'max-lines-per-function': 'off', // a describe block is one function
      '@typescript-eslint/no-non-null-assertion': 'off', // a missing value fails the test either way
    },
  },
)
