export { base64 } from '../../../shared/base64';
