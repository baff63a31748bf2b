import { writeIndexes } from './indexes.js';
import { writeReadme } from './readme.js';

writeIndexes();
await writeReadme();
