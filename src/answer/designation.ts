/** Fastener descriptions, for the programs above the engine. */
export { readDesignation } from '../shelf/designation/read-designation.ts';
