export type Quantity = string;
export type UnitId = string;
