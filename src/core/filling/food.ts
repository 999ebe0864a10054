/** What a food is, as a filling reckons with it: the shapes of core/properties/food.ts, where the table of ingredients has them too. */
export * from '../properties/food.ts';
