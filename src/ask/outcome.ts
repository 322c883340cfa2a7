export type * from '../../workers/desk.worker';
