import { runSightWorker } from '@larkhold/sight/in-worker';

runSightWorker(self);
