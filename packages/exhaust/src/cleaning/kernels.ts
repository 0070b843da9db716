/** Kernels of this subject: pure functions on SI numbers. */
export { type CleaningVolumes, type CleaningVolumesInput, cleaningVolumes } from './volumes/kernel.js';
