// A folder that is no floor.
