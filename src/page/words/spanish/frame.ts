// Told in English so far.
export {frame} from '../english/frame';
