using Rodwright.PagesBench.Crowd;
using Rodwright.PagesBench.Speed;

switch (args)
{
    case ["speed"]:
        await SpeedRun.Measure(Console.Out);
        break;
    case ["crowd"]:
        await CrowdRun.Measure(Console.Out);
        break;
    default:
        Console.Error.WriteLine("speed   one person: a change until it is painted, the first page, moving the sheet; in Chromium");
        Console.Error.WriteLine("crowd   50 people at once, without browsers");
        break;
}
