// What stands beside the sheet at home: nothing but what prints it.
export const SheetTools = (): null => null;
