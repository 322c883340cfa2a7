const notInShared = [
  ...['document', 'window', 'self', 'globalThis', 'navigator', 'location', 'localStorage'],
  ...['Date', 'performance', 'setTimeout', 'setInterval', 'requestAnimationFrame'],
  ...['Worker', 'postMessage', 'fetch', 'indexedDB', 'crypto', 'process'],
];

const inlineStyle = {
  selector: 'SvelteAttribute[key.name="style"]',
  message: "style-src 'self' blocks a style attribute: use a class, or a style:… directive.",
};

const ownDigits = {
  selector:
    'CallExpression[callee.property.name=/^(toFixed|toPrecision|toExponential|toLocaleString)$/]',
  message:
    'Digits are cut in shared/units/digits alone: figure, numberText, toDecimals, toFigures.',
};

// no-implied-eval overlooks a global that it has not been told of.
/** @type {Record<string, 'readonly'>} */
export const seenByImpliedEval = {
  globalThis: 'readonly',
  setInterval: 'readonly',
  setTimeout: 'readonly',
  window: 'readonly',
};

/** @type {Partial<import('eslint').Linter.RulesRecord>} */
export const everywhere = {
  eqeqeq: 'error',
  'no-eval': 'error',
  'no-implied-eval': 'error',
  'no-new-func': 'error',
  'no-restricted-syntax': ['error', inlineStyle],
};

/** @type {Partial<import('eslint').Linter.RulesRecord>} */
export const writesNumbers = {
  'no-restricted-syntax': ['error', inlineStyle, ownDigits],
};

/** @type {Partial<import('eslint').Linter.RulesRecord>} */
export const inWorkers = {
  'no-restricted-properties': [
    'error',
    { object: 'Math', property: 'random', message: 'Draw from the seeded generator.' },
  ],
};

/** @type {Partial<import('eslint').Linter.RulesRecord>} */
export const inShared = {
  ...inWorkers,
  'no-restricted-globals': [
    'error',
    ...notInShared.map((name) => ({
      name,
      message: 'shared/ has no page, no clock, no chance and no worker.',
    })),
  ],
};
