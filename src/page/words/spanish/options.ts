// Told in English so far.
export {options} from '../english/options';
