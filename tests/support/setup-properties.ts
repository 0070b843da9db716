import fc from 'fast-check';

// The same inputs in every run, so that a failure is a change and not luck. `WALLFLOW_SEED=<number>` looks elsewhere.
const given = Number(process.env.WALLFLOW_SEED);
fc.configureGlobal({ seed: Number.isInteger(given) && process.env.WALLFLOW_SEED !== undefined ? given : 20_240_229 });
