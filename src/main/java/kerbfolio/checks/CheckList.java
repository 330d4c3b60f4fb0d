package kerbfolio.checks;

import java.util.List;
import kerbfolio.check.Check;
import kerbfolio.checks.highvoltage.BackVoltage;
import kerbfolio.checks.highvoltage.CableAmpacity;
import kerbfolio.checks.highvoltage.CableProtection;
import kerbfolio.checks.highvoltage.CableVoltage;
import kerbfolio.checks.highvoltage.ContactorFuse;
import kerbfolio.checks.highvoltage.ContactorPolarity;
import kerbfolio.checks.highvoltage.FaultWithstand;
import kerbfolio.checks.highvoltage.FuseBreaking;
import kerbfolio.checks.highvoltage.FuseContinuous;
import kerbfolio.checks.highvoltage.FuseGuardsCable;
import kerbfolio.checks.highvoltage.FuseLetThrough;
import kerbfolio.checks.highvoltage.FuseVoltage;
import kerbfolio.checks.highvoltage.PackCurrent;
import kerbfolio.checks.highvoltage.ReverseBreaking;
import kerbfolio.checks.highvoltage.StringFuse;
import kerbfolio.checks.highvoltage.VoltageDrop;
import kerbfolio.checks.weight.AxleMargin;
import kerbfolio.checks.weight.AxleRatingSum;
import kerbfolio.checks.weight.CentreAcross;
import kerbfolio.checks.weight.CentreAlong;
import kerbfolio.checks.weight.CentreHeight;
import kerbfolio.checks.weight.CrossWeight;
import kerbfolio.checks.weight.FrontShare;
import kerbfolio.checks.weight.GrossMargin;
import kerbfolio.checks.weight.LadenAxleMargin;
import kerbfolio.checks.weight.LadenGrossMargin;
import kerbfolio.checks.weight.LadenTyreLoad;
import kerbfolio.checks.weight.LedgerClosure;
import kerbfolio.checks.weight.LedgerDoubt;
import kerbfolio.checks.weight.LeftShare;
import kerbfolio.checks.weight.RideFrequency;
import kerbfolio.checks.weight.RideHeightChange;
import kerbfolio.checks.weight.SeatedGrossMargin;
import kerbfolio.checks.weight.SpringDeflection;
import kerbfolio.checks.weight.StatedMass;
import kerbfolio.checks.weight.StaticStability;
import kerbfolio.checks.weight.TyreLoad;
import kerbfolio.checks.weight.TyreSpeed;

/** Every check of this program, in the order a dossier prints them. */
public final class CheckList {
    public static final List<Check> ALL = List.of(
            new GrossMargin(),
            new AxleMargin(),
            new SeatedGrossMargin(),
            new LadenGrossMargin(),
            new LadenAxleMargin(),
            new AxleRatingSum(),
            new TyreLoad(),
            new LadenTyreLoad(),
            new TyreSpeed(),
            new FrontShare(),
            new LeftShare(),
            new CrossWeight(),
            new LedgerClosure(),
            new LedgerDoubt(),
            new StatedMass(),
            new CentreAlong(),
            new CentreAcross(),
            new CentreHeight(),
            new StaticStability(),
            new RideHeightChange(),
            new SpringDeflection(),
            new RideFrequency(),
            new PackCurrent(),
            new CableAmpacity(),
            new CableVoltage(),
            new VoltageDrop(),
            new FuseVoltage(),
            new FuseContinuous(),
            new FuseBreaking(),
            new FuseGuardsCable(),
            new FuseLetThrough(),
            new FaultWithstand(),
            new CableProtection(),
            new StringFuse(),
            new ContactorFuse(),
            new ReverseBreaking(),
            new ContactorPolarity(),
            new BackVoltage());

    private CheckList() {}
}
