/** Plain data of the engine into the protocol’s shapes. With `from-proto`, the only files that know them. */
export * from './actions';
export * from './completion';
export * from './edits';
export * from './findings';
export * from './hints';
export * from './hover';
export * from './lenses';
export * from './links';
export * from './names';
export * from './outline';
export * from './places';
export * from './signature';
