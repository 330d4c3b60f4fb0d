package kerbfolio.quantity;

/** What a written figure claims: the value itself, or only a bound an instrument could not read past. */
public enum Sense {
    VALUE(""),
    ABOVE("> "),
    BELOW("< ");

    private final String sign;

    Sense(String sign) {
        this.sign = sign;
    }

    public String sign() {
        return sign;
    }
}
