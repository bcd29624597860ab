/** What opens over a page, by the English name of its button: the first of that name, where the page has it. */
export const openers: Record<string, readonly string[]> = {
  '/': ['All in the book'],
  '/receiving/new': ['Add an item'],
  '/receiving/items': ['Add an item', 'Correct'],
  '/receiving/suppliers': ['Add a supplier'],
  '/receiving/$receiptId': ['Correct', 'Void'],
  '/shipping/new': ['A new customer'],
  '/shipping/shipments': ['Correct', 'Void'],
  '/shipping/customers': ['Add a customer', 'Correct'],
  '/shop': ['Change'],
  '/shop/people': ['Add a person', 'Change my password', 'Change'],
  '/shop/instruments': ['Add an instrument', 'Record a check', 'Correct'],
  '/products': ['Add a product'],
  '/lots/$lotId': ['Put in meat', 'Weigh an ingredient', 'Pack', 'Take out', 'Something unforeseen'],
  '/products/$productId/plan/points/$controlPointId': ['Choose a published limit', 'Write one of your own', 'Change the figures'],
};
