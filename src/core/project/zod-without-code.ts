import { z } from 'zod';

// Without this the library tries to compile text into code, which a page's content security policy reports as a breach.
// Every schema imports the library from here, so that none is made before.
z.config({ jitless: true });

export { z };
