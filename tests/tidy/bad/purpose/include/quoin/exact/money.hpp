/// Money, in a header that may be included twice.
