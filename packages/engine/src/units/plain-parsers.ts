import * as z from 'zod';

// zod's compiled parsers need `eval`, which the app's Content-Security-Policy forbids, and even the try is a fault on the page. It has to be said
// before the first schema is made, so every module that makes an object's schema imports this one; the package names it as one with an effect.
z.config({ jitless: true });
