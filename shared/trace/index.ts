export * from './columns';
export * from './csv';
export * from './trace';
