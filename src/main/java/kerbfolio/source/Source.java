package kerbfolio.source;

/** The documents formulas are taken from; figures of regulations stand in requirement sets with their own documents. */
public enum Source {
    ISO_10392("ISO 10392:2011, Road vehicles \u2014 Determination of centre of gravity"),
    ISO_13528("ISO 13528, Statistical methods for use in proficiency testing by interlaboratory comparison, 2022"),
    NHTSA_ROLLOVER(
            "NHTSA HS 809 868, Trends in the static stability factor of passenger cars, light trucks and vans, 2005"),
    UN_R30("UN Regulation No. 30, pneumatic tyres for motor vehicles and their trailers"),
    OWN_RULE("Rule of this program, no outside source"),
    CIRCUITS("Laws of direct-current circuits"),
    UN_R100("UN Regulation No. 100, electric power train"),
    UN_R94("UN Regulation No. 94, frontal collision"),
    IEC_60228("IEC 60228, Conductors of insulated cables"),
    IEC_60287("IEC 60287-1-1, Electric cables, calculation of the current rating"),
    IEC_60364_5_54("IEC 60364-5-54, Low-voltage electrical installations, protective conductors"),
    IEC_61851("IEC 61851-1, Electric vehicle conductive charging system"),
    IEC_60028("IEC 60028, International standard of resistance for copper"),
    ASTM_B258("ASTM B258, Standard nominal diameters of solid round wires used as electrical conductors"),
    STATICS("Statics of a rigid body on two axles"),
    DYNAMICS("Free vibration of a mass on a spring"),
    SP_811("NIST SP 811, 2008, Guide for the use of the International System of Units");

    private final String title;

    Source(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }

    public Citation clause(String clause) {
        return new Citation(title, clause);
    }

    /** The document as a whole, where the matter is too common for a clause. */
    public Citation whole() {
        return new Citation(title, "");
    }
}
