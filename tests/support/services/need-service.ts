import { expect, type TestContext } from 'vitest';
import { isThere } from '../../../src/cli/house/running-services/index.ts';
import {
  adviceForService,
  areServicesRequired,
  type Service,
} from '../../../src/cli/house/services.ts';

/** Where the program is missing the test is passed over, or fails where it may not be. */
export function needService(service: Service, test: Pick<TestContext, 'skip'>): void {
  if (isThere(service)) return;
  const advice = adviceForService(service);
  if (areServicesRequired()) expect.fail(advice);
  test.skip(advice);
}
