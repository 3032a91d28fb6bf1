// Told in English so far.
export {sheet} from '../english/sheet';
