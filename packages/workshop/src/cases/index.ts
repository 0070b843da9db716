export { type GeneratedCase, generateCase } from './generate-case.js';
