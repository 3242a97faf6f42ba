/** Reading documents, for the programs above the engine. */
export { MOST_CHARACTERS, readJson } from '../job/read-job.ts';
