import { createWords, localeHere, useWords } from '@larkhold/words';
import { beforeAll } from 'vitest';

/** Test files share their modules: each begins in the language that it would begin in alone. */
beforeAll(() => useWords(createWords(localeHere())));
