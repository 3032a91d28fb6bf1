// Told in English so far.
export {afford} from '../english/afford';
