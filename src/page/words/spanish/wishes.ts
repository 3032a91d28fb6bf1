// Told in English so far.
export {wishes} from '../english/wishes';
