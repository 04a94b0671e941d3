import { config } from 'zod';

/** The page's security policy forbids code made from text, which the schema library would otherwise try. */
config({ jitless: true });
