/** The page fetches its sentences in parts; a test knows them all. */
import { en } from '../../src/i18n/en/index.ts';
import { addMessages } from '../../src/i18n/index.ts';

addMessages(en);
