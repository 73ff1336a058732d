// The screens' style sheets and the styles inside their parts; `cargo xtask test style` runs it.
export default {
  extends: ['stylelint-config-standard'],
  ignoreFiles: ['dist/**'],
  overrides: [{ files: ['**/*.svelte'], customSyntax: 'postcss-html' }],
  rules: {
    // Rules stand together without a blank line between them, as everywhere here.
    'rule-empty-line-before': null,
    'at-rule-empty-line-before': null,
    'comment-empty-line-before': null,
    'declaration-empty-line-before': null,
    'custom-property-empty-line-before': null,
    // A phone's older web view reads the older spelling.
    'media-feature-range-notation': null,
    'no-descending-specificity': null,
    'color-hex-length': 'long',
    'value-keyword-case': ['lower', { camelCaseSvgKeywords: true, ignoreProperties: ['--face'] }],
    // A page is read from left to right or from right to left: sides are named by where reading starts and ends. The
    // device's own edges (--rim-left and the like) and drawings keep left and right.
    'property-disallowed-list': [
      'left',
      'right',
      /^(margin|padding|border|scroll-margin|scroll-padding)-(left|right)/,
      /^border-(top|bottom)-(left|right)-/,
    ],
    'declaration-property-value-disallowed-list': {
      'text-align': ['left', 'right'],
      float: ['left', 'right'],
      clear: ['left', 'right'],
      'border-radius': [/\s/],
    },
    // iOS knows the size of text by its own name alone.
    'property-no-vendor-prefix': null,
    'length-zero-no-unit': [true, { ignoreFunctions: ['calc', 'clamp', 'max', 'min', 'env', 'var'] }],
    'declaration-block-single-line-max-declarations': null,
    'selector-pseudo-class-no-unknown': [true, { ignorePseudoClasses: ['global'] }],
  },
};
