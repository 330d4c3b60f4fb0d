package kerbfolio.pdf;

import java.io.IOException;

/** A PDF, or a file in it, that cannot be read; the message goes on after the name of the file: "is encrypted; …". */
public final class UnreadablePdf extends IOException {
    private static final long serialVersionUID = 1L;

    private final String reason;

    UnreadablePdf(String reason, Throwable cause) {
        super(reason, cause);
        this.reason = reason;
    }

    /** With the reason. */
    public UnreadablePdf(String reason) {
        super(reason);
        this.reason = reason;
    }

    @Override
    public String getMessage() {
        return reason;
    }
}
