namespace Rodwright.Stairs.Jobs;

/// <summary>The codes of everything a job file can be refused for. Stable: a code keeps its meaning for good, and a new kind takes a new number.</summary>
public static class JobCodes
{
    /// <summary>The text is not JSON; the message gives line and column.</summary>
    public const string NotJson = "RW1001";

    /// <summary>The text is empty.</summary>
    public const string Empty = "RW1002";

    /// <summary>The text is longer than any job can be.</summary>
    public const string TooLong = "RW1003";

    /// <summary>Braces or brackets nested deeper than any job needs.</summary>
    public const string TooDeep = "RW1004";

    /// <summary>The text is JSON, but a job is one object in braces.</summary>
    public const string NotAnObject = "RW1005";

    /// <summary>A field stands twice in one object.</summary>
    public const string Repeated = "RW1006";

    /// <summary>A field that no job has.</summary>
    public const string Unknown = "RW1007";

    /// <summary>A field that every job must have.</summary>
    public const string Missing = "RW1008";

    /// <summary>Something other than a number where a number belongs.</summary>
    public const string NumberWanted = "RW1009";

    /// <summary>Something other than text where text belongs.</summary>
    public const string TextWanted = "RW1010";

    /// <summary>Something other than true or false.</summary>
    public const string FlagWanted = "RW1011";

    /// <summary>Something other than a group of fields in braces.</summary>
    public const string GroupWanted = "RW1012";

    /// <summary>Something other than a list in brackets.</summary>
    public const string ListWanted = "RW1013";

    /// <summary>null where a value belongs.</summary>
    public const string Null = "RW1014";

    /// <summary>A number too large to be kept (1e999).</summary>
    public const string NotFinite = "RW1015";

    /// <summary>A number written in quotation marks, "NaN" among them.</summary>
    public const string NumberInQuotes = "RW1016";

    /// <summary>A negative number where none makes sense.</summary>
    public const string Negative = "RW1017";

    /// <summary>Zero where the thing must have a size.</summary>
    public const string Zero = "RW1018";

    /// <summary>Below the range that is allowed.</summary>
    public const string Below = "RW1019";

    /// <summary>Above the range that is allowed.</summary>
    public const string Above = "RW1020";

    /// <summary>A number larger than any house: a million and more.</summary>
    public const string Absurd = "RW1021";

    /// <summary>A part of one where only whole things count.</summary>
    public const string NotWhole = "RW1022";

    /// <summary>Text with nothing in it.</summary>
    public const string BlankText = "RW1023";

    /// <summary>Text too long for a title block.</summary>
    public const string LongText = "RW1024";

    /// <summary>Text with characters that cannot be printed.</summary>
    public const string UnprintableText = "RW1025";

    /// <summary>A job file of another version.</summary>
    public const string Version = "RW1026";

    /// <summary>A regulation that is not in the catalogue.</summary>
    public const string Regulation = "RW1027";

    /// <summary>A hand that is neither left nor right.</summary>
    public const string Hand = "RW1028";

    /// <summary>A side that is neither open nor wall.</summary>
    public const string Side = "RW1029";

    /// <summary>A turn that this version does not know.</summary>
    public const string Turn = "RW1030";

    /// <summary>A way of setting out tapered steps that this version does not know.</summary>
    public const string Method = "RW1031";

    /// <summary>Too few or too many tapered steps in a quarter turn.</summary>
    public const string TaperedSteps = "RW1032";

    /// <summary>A landing with something that only tapered steps have.</summary>
    public const string LandingWith = "RW1033";

    /// <summary>A sequence with nothing in it.</summary>
    public const string EmptySequence = "RW1035";

    /// <summary>An item that is neither a flight nor a turn.</summary>
    public const string NeitherFlightNorTurn = "RW1036";

    /// <summary>An item that is a flight and a turn at once.</summary>
    public const string BothFlightAndTurn = "RW1037";

    /// <summary>A flight with something that only a turn has.</summary>
    public const string FlightWith = "RW1038";

    /// <summary>A sequence without a single step: no risers to set out.</summary>
    public const string NoSteps = "RW1039";

    /// <summary>More steps than this version sets out.</summary>
    public const string TooManySteps = "RW1040";

    /// <summary>Two flights one after the other with nothing between.</summary>
    public const string TwoFlights = "RW1041";

    /// <summary>No readings at all.</summary>
    public const string NoReadings = "RW1042";

    /// <summary>Readings of one thing that lie further apart than the tolerance.</summary>
    public const string ReadingsDisagree = "RW1043";

    /// <summary>More readings of one thing than make sense.</summary>
    public const string TooManyReadings = "RW1044";

    /// <summary>A rise nobody could climb: something in height or step count is wrong.</summary>
    public const string Rise = "RW1050";

    /// <summary>Strings that leave no room between them.</summary>
    public const string Width = "RW1051";

    /// <summary>A nosing as deep as the going.</summary>
    public const string Nosing = "RW1053";

    /// <summary>A riser as thick as the going.</summary>
    public const string RiserThickness = "RW1054";

    /// <summary>A tread as thick as the rise.</summary>
    public const string TreadThickness = "RW1055";

    /// <summary>A tread wedge longer than the going holds.</summary>
    public const string TreadWedge = "RW1056";

    /// <summary>A riser wedge taller than the rise holds.</summary>
    public const string RiserWedge = "RW1057";

    /// <summary>Housings that come through the string.</summary>
    public const string Housing = "RW1058";

    /// <summary>A margin that leaves no string.</summary>
    public const string Margin = "RW1059";

    /// <summary>A corner housing that comes through the wall string.</summary>
    public const string Corner = "RW1060";

    /// <summary>A newel no thicker than the string tenoned into it.</summary>
    public const string NewelTooThin = "RW1061";

    /// <summary>Housings of opposite newel faces that meet.</summary>
    public const string NewelHousing = "RW1062";

    /// <summary>A mortice that comes out of the newel's other side.</summary>
    public const string Mortice = "RW1063";

    /// <summary>A tenon thicker than its string.</summary>
    public const string TenonThickness = "RW1064";

    /// <summary>A peg that does not fit its tenon.</summary>
    public const string Peg = "RW1065";

    /// <summary>A draw bore offset too far for a peg to be driven.</summary>
    public const string Draw = "RW1066";

    /// <summary>A haunch longer than its tenon.</summary>
    public const string Haunch = "RW1067";

    /// <summary>Cover that leaves no place for a riser on the newel.</summary>
    public const string Cover = "RW1068";

    /// <summary>A riser of a turn fixed where its housing cannot be cut.</summary>
    public const string TurnRiser = "RW1069";

    /// <summary>Straight steps share the taper of a turn whose method does not share it.</summary>
    public const string SharedTaper = "RW1071";

    /// <summary>A field that only a half turn has, at a quarter turn.</summary>
    public const string WellOfQuarter = "RW1072";

    /// <summary>Several readings were given: their mean and how far they lie apart (a note, not an error).</summary>
    public const string Readings = "RW1080";

    /// <summary>More things in a list than make sense.</summary>
    public const string TooManyItems = "RW1100";

    /// <summary>Too few corners to enclose anything.</summary>
    public const string TooFewCorners = "RW1101";

    /// <summary>A corner that is not two numbers.</summary>
    public const string PointWanted = "RW1102";

    /// <summary>An opening that is neither door nor window.</summary>
    public const string OpeningKind = "RW1103";

    /// <summary>A leaf that swings neither in nor out.</summary>
    public const string Swing = "RW1104";

    /// <summary>A ceiling of neither storey.</summary>
    public const string Storey = "RW1105";

    /// <summary>A place on the way in that is neither door nor turn.</summary>
    public const string WayInKind = "RW1106";

    /// <summary>Floor finishes that leave no height between the floors.</summary>
    public const string Finishes = "RW1110";

    /// <summary>A corner in no form, in several, or with half of one.</summary>
    public const string CornerForm = "RW1111";

    /// <summary>Lengths across a corner that make no triangle.</summary>
    public const string CornerTriangle = "RW1112";

    /// <summary>A diagonal where no next wall is measured.</summary>
    public const string CornerNext = "RW1113";

    /// <summary>A wall further out of plumb than a wall can be.</summary>
    public const string OutOfPlumb = "RW1114";

    /// <summary>Walls that cross one another.</summary>
    public const string WallsCross = "RW1115";

    /// <summary>A room measured all round that does not close.</summary>
    public const string RoomOpen = "RW1116";

    /// <summary>A door or window that runs past the end of its wall.</summary>
    public const string OpeningPastWall = "RW1117";

    /// <summary>Two doors or windows in one place.</summary>
    public const string OpeningsOverlap = "RW1118";

    /// <summary>A head that is not above its sill.</summary>
    public const string OpeningHead = "RW1119";

    /// <summary>A door with a sill nobody could step over.</summary>
    public const string DoorSill = "RW1120";

    /// <summary>A well in no form, or in both.</summary>
    public const string WellForm = "RW1121";

    /// <summary>A well whose sides cross, or that encloses nothing.</summary>
    public const string WellShape = "RW1122";

    /// <summary>A trimmer deeper than the height between the floors.</summary>
    public const string TrimmerDepth = "RW1123";

    /// <summary>A ceiling with neither a second height nor a pitch, or with both, or without its first height.</summary>
    public const string CeilingForm = "RW1124";

    /// <summary>A ceiling whose two heights were taken at one place.</summary>
    public const string CeilingPlaces = "RW1125";

    /// <summary>A ceiling as steep as a wall.</summary>
    public const string CeilingSteep = "RW1126";

    /// <summary>A stair placed against a wall that was not measured.</summary>
    public const string PlaceWall = "RW1127";

    /// <summary>A first riser placed past the end of its wall.</summary>
    public const string PlacePast = "RW1128";

    /// <summary>A turn on the way in without a second passage, or a door with one.</summary>
    public const string WayInForm = "RW1129";

    /// <summary>A family of layouts that is not known.</summary>
    public const string Family = "RW1140";

    /// <summary>A shape of the bottom step that is not known.</summary>
    public const string BottomShape = "RW1141";

    /// <summary>A text that is no length in feet and inches, or one in a job in millimetres.</summary>
    public const string InchText = "RW1150";

    /// <summary>A unit that is not known.</summary>
    public const string UnitsWord = "RW1151";

    /// <summary>A newel at an end of the stair that is not known.</summary>
    public const string EndNewel = "RW1142";

    /// <summary>A shape of newel caps that is not known.</summary>
    public const string CapShape = "RW1143";

    /// <summary>A way of the upper landing's balustrade that is not known.</summary>
    public const string LandingWay = "RW1144";

    /// <summary>A word for where wall rails are wanted that is not known.</summary>
    public const string WallRail = "RW1145";

    /// <summary>A joint at the corner of the wall strings that is not known.</summary>
    public const string CornerJoint = "RW1146";

    /// <summary>A word for how a string meets the skirting that is not known.</summary>
    public const string SkirtingJoint = "RW1147";

    /// <summary>Dovetails lapped so little that they hold nothing.</summary>
    public const string CornerLap = "RW1081";

    /// <summary>A tongue as thick as its string.</summary>
    public const string CornerTongue = "RW1079";

    /// <summary>Balusters wider than the rail or base rail they stand in.</summary>
    public const string BalusterWide = "RW1073";

    /// <summary>Grooves for the balusters that leave too little of a rail.</summary>
    public const string GrooveDeep = "RW1074";

    /// <summary>A rail's tenon as thick as the rail.</summary>
    public const string RailTenonThick = "RW1075";

    /// <summary>A rail's mortice past the middle of the newel.</summary>
    public const string RailMortice = "RW1076";

    /// <summary>A rail's peg too near its shoulder or the tenon's end.</summary>
    public const string RailPeg = "RW1077";

    /// <summary>A recess through a newel's cap.</summary>
    public const string CapRecess = "RW1078";
}
