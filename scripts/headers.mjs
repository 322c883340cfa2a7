const policy = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' data: blob:",
  'font-src': "'self'",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'frame-ancestors': "'none'",
};

/** @param {[string, string][]} directives */
const write = (directives) => directives.map(([name, value]) => `${name} ${value}`).join('; ');

// Trap: browsers report frame-ancestors in a <meta> as an error, and a <meta> does not reach workers.
export const metaPolicy = write(
  Object.entries(policy).filter(([name]) => name !== 'frame-ancestors'),
);

export const headers = {
  'Content-Security-Policy': write(Object.entries(policy)),
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
};
