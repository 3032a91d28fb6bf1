// Told in English so far.
export {money} from '../english/money';
