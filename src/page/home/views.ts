// The views at home, in their order: the sheet that was taken home is the first.
export const views = ['sheet', 'tour', 'loans', 'budget', 'site', 'schedule', 'check'] as const;

/// What is opened first.
export const plain_view = 'sheet';

/// Whether workbooks are made.
export const has_workbook = false;
