export { whyUnreadable as unreadable } from '../catalogue/why-unreadable.ts';
