// The views at the desk, in their order.
export const views = ['tour', 'loans', 'budget', 'site', 'schedule', 'sheet', 'check'] as const;

/// What a first visitor sees.
export const plain_view = 'tour';

/// Whether the program makes workbooks.
export const has_workbook = true;
