// Whose home it is, in the head of the page at the desk: the buyers that are open.
export {Buyers as Whose} from '../parts/buyers';
