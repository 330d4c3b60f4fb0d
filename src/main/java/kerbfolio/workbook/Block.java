package kerbfolio.workbook;

/** Rows of a trade's sheet that belong together. Addresses are settled for all blocks before any is written. */
interface Block {
    /** Rows it takes, with the empty one after it. */
    int height();

    /** Columns it needs to the right of what was found. */
    int inputs();

    /** Enters where its figures will stand. */
    void settle(AddressBook addresses, String sheet, int top);

    void write(AddressBook addresses, Pen pen, int top);
}
