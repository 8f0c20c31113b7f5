import { fileURLToPath } from 'node:url';

// parts of the built program lie beside this file, so that the same way leads up from all of them

/** The built pages of the workspace. */
export const PAGES = fileURLToPath(new URL('../../dist/web', import.meta.url));

/** The invented demo cases. */
export const EXAMPLES = fileURLToPath(new URL('../../examples', import.meta.url));
