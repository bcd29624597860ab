export * from './catalogue';
export * from './curing';
export * from './food-code';
export * from './fsis-come-up';
export * from './fsis-meat';
export * from './fsis-poultry';
export * from './fsis-stabilization';
export * from './receiving';
