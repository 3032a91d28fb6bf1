// Told in English so far.
export {loan_names} from '../english/loan_names';
