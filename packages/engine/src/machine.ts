/** The session's statechart, for the inspectors and visualizers that read xstate machines. `createSession` is what programs use. */
export { type ChartContext, type ChartEvent, sessionMachine } from './session/session-machine.ts';
