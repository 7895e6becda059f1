import type { PrescribedBlock } from './prescription.ts';
import type { Reason } from './reason.ts';

/** What a limit leaves of some blocks, and why, for blocks that were held to it. */
export interface Limited {
  /** The same list where the limit did not act. */
  blocks: PrescribedBlock[];
  reasonsFor?: (from: readonly PrescribedBlock[], to: readonly PrescribedBlock[]) => Reason[];
}
