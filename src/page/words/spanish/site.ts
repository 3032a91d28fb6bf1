// Told in English so far.
export {site} from '../english/site';
