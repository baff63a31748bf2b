import { parts } from './parts.js';

const measure = parts[process.argv[2] as keyof typeof parts];
console.log(JSON.stringify(await measure()));
