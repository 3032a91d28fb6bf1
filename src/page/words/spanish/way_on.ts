// Told in English so far.
export {way_on} from '../english/way_on';
