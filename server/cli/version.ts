export { VERSION } from '../../shared/version';
