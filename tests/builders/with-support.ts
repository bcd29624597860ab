export { supported, withSupport } from '../../apps/api/src/products/with-support.test-data';
