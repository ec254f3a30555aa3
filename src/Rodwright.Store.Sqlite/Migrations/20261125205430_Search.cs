using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Rodwright.Store.Sqlite.Migrations;

internal sealed partial class Search : Migration
{
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.AddColumn<string>(
            name: "search",
            table: "jobs",
            type: "TEXT",
            nullable: true);
    }

    protected override void Down(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropColumn(
            name: "search",
            table: "jobs");
    }
}
