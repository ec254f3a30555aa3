using Rodwright.Store.Saver;
using Rodwright.Store.Sqlite;

// Rodwright.Store.Saver FILE [--job ID | --title TITLE]: does nothing but save. One job, made if none is named, gets revision after revision until somebody ends the
// process; the number of each is printed once it has been acknowledged, and not before. With a title the job is made under it and the program is done.
using var shelf = await SqliteShelf.Open(args[0], TimeProvider.System);
if (args is [_, "--title", var title])
{
    await shelf.Add(WholeText.Draft(1) with { Title = title });
    return;
}
var job = args is [_, "--job", var id] ? (await shelf.Card(Guid.Parse(id)))! : await shelf.Add(WholeText.Draft(1));
Console.WriteLine(job.Revision);
while (true)
{
    var outcome = await shelf.Save(job.Id, job.Revision, WholeText.Draft(job.Revision + 1));
    // Where somebody else saves the same job and was first, it goes on from what is there.
    job = outcome!.Card;
    if (outcome.Kept) Console.WriteLine(job.Revision);
}
