import type { Recovery, WeighedMass } from './kernel.js';

export type RecoveryVerdict = 'clean' | 'not-clean' | 'unclear' | 'lighter' | 'unknown';

/**
 * Whether a recovery reaches what is asked for, beyond twice its uncertainty either way; unknown never passes, nor does a
 * filter that is lighter than when new by more than twice the uncertainty: nothing that was in it can have weighed that.
 */
export function recoveryVerdict(recovery: Recovery | undefined, needed: number): RecoveryVerdict {
  if (recovery === undefined) return 'unknown';
  if (recovery.residue.mass + 2 * recovery.residue.uncertainty < 0) return 'lighter';
  if (recovery.share - 2 * recovery.uncertainty >= needed) return 'clean';
  return recovery.share + 2 * recovery.uncertainty < needed ? 'not-clean' : 'unclear';
}

export type SootVerdict = 'none' | 'left' | 'unclear' | 'unknown';

/** Whether one more bake took out what counts as soot, beyond twice the uncertainty of the loss; a gain decides nothing. */
export function sootVerdict(loss: WeighedMass | undefined, limit: number): SootVerdict {
  if (loss === undefined) return 'unknown';
  const margin = 2 * loss.uncertainty;
  if (loss.mass < -margin) return 'unclear';
  if (loss.mass + margin <= limit) return 'none';
  return loss.mass - margin > limit ? 'left' : 'unclear';
}
