import { buildPage } from './page-build.ts';
import { sayFailure } from './say-failure.ts';

await buildPage().then(() => process.stdout.write('Built the page in dist/.\n'), sayFailure);
