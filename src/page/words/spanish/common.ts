// Told in English so far.
export {common} from '../english/common';
