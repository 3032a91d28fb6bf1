// Told in English so far.
export {tour} from '../english/tour';
