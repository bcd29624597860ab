export { supported, withSupport } from '../../apps/api/src/plan/with-support.test-data';
