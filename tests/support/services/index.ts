export * from '../../../src/cli/house/running-services/index.ts';
export { needService } from './need-service.ts';
