import { productClasses, type ProductClass } from '@larderbook/haccp';

/** "Ham, pumped" */
export const classWords = (productClass: ProductClass): string => productClass.charAt(0).toUpperCase() + productClass.slice(1);

export const classChoices = productClasses.map((value) => ({ value, name: classWords(value) }));
