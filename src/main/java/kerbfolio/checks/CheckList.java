package kerbfolio.checks;

import java.util.List;
import kerbfolio.check.Check;
import kerbfolio.checks.highvoltage.Bonding;
import kerbfolio.checks.highvoltage.CableColour;
import kerbfolio.checks.highvoltage.InterlockLoop;
import kerbfolio.checks.highvoltage.IsolationCoverage;
import kerbfolio.checks.highvoltage.IsolationResistance;
import kerbfolio.checks.highvoltage.MakeDeadRecord;
import kerbfolio.checks.highvoltage.MonitorDisplayValue;
import kerbfolio.checks.highvoltage.MonitorTestResistor;
import kerbfolio.checks.highvoltage.PartJoined;
import kerbfolio.checks.highvoltage.PolesApart;
import kerbfolio.checks.highvoltage.StayLive;
import kerbfolio.checks.highvoltage.TouchProtection;
import kerbfolio.checks.highvoltage.VoltageClass;
import kerbfolio.checks.highvoltage.VoltageWindow;
import kerbfolio.checks.highvoltage.WarningSymbol;
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
            new VoltageClass(),
            new VoltageWindow(),
            new IsolationResistance(),
            new MonitorDisplayValue(),
            new IsolationCoverage(),
            new MonitorTestResistor(),
            new Bonding(),
            new TouchProtection(),
            new WarningSymbol(),
            new CableColour(),
            new InterlockLoop(),
            new PartJoined(),
            new PolesApart(),
            new StayLive(),
            new MakeDeadRecord());

    private CheckList() {}
}
