/** Kernels of this subject: pure functions on SI numbers. */
export {};
