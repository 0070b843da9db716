/** Kernels of this subject: pure functions on SI numbers. */
export { alligation, amountToAdd, type BlendPart, blend } from './blend/kernel.js';
export { type MassShareInput, massShareFromParts, partsFromMassShare, partsFromVolumeShare } from './dilution/kernel.js';
export { type CleaningVolumes, type CleaningVolumesInput, cleaningVolumes } from './volumes/kernel.js';
