/** Kernels of this subject: pure functions on SI numbers. */

export { type MassShareInput, massShareFromParts, partsFromMassShare, partsFromVolumeShare } from './dilution/kernel.js';
export { type CleaningVolumes, type CleaningVolumesInput, cleaningVolumes } from './volumes/kernel.js';
